/** What the recorded cases show about the rules. */
package io.faultwright.analysis.coverage;
