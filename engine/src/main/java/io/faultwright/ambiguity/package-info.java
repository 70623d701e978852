/** Which readings tell which faults apart, and what a case leaves open, as values. */
package io.faultwright.ambiguity;
