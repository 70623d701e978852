/** Rules as a Drools program. Conditions become constraints; Drools decides which rules fire. */
package io.faultwright.compile;
