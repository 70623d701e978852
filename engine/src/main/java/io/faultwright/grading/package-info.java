/** Marks handed-in quizzes, and tells how good their items are. */
package io.faultwright.grading;
