/** Symptoms as decision tables of the Decision Model and Notation (OMG DMN 1.3). */
package io.faultwright.dmn;
