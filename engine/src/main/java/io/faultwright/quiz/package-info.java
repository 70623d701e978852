/** Items of a quiz, as values: what is shown, what can be chosen, and why one of it is right. */
package io.faultwright.quiz;
