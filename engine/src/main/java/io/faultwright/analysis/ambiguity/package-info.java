/**
 * Which readings tell which faults apart; what a partial case leaves open, and what to read next.
 */
package io.faultwright.analysis.ambiguity;
