/** What a symptom asks about, in the order that costs least, for the equipment a chart is for. */
package io.faultwright.analysis.order;
