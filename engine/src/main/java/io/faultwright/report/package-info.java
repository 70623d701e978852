/** Findings, problems and traces as text for people and as JSON for machines. */
package io.faultwright.report;
