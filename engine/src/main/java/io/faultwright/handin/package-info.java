/**
 * The quiz that was given out, and what was handed in, read from files and set beside each other.
 */
package io.faultwright.handin;
