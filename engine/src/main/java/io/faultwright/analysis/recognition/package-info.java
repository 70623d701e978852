/** Whether a caller's complaint leads to exactly one symptom. */
package io.faultwright.analysis.recognition;
