/** What means something different in two revisions, over all situations. */
package io.faultwright.analysis.change;
