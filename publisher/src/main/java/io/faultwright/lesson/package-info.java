/** What a session shows: its charts, and its worked examples moment by moment. */
package io.faultwright.lesson;
