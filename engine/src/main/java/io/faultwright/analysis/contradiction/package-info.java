/** Possible situations that get two answers which cannot both be right. */
package io.faultwright.analysis.contradiction;
