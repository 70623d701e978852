/** Trainers' Markdown to HTML that cannot do anything; the only user of the Markdown library. */
package io.faultwright.prose;
