/** Charts that a trainer wrote, proved against the rules over every possible situation. */
package io.faultwright.analysis.chart;
