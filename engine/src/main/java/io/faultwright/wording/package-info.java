/**
 * Conditions, values and answers in the trainer's words: {@link Wording} for people, {@link
 * RuleText} for text that may be pasted back into a file.
 */
package io.faultwright.wording;
