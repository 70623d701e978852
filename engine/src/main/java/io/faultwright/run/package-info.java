/** Situations given to the Drools program, and why it answered as it did. */
package io.faultwright.run;
