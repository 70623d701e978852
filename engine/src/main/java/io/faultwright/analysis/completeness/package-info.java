/** Definitions that nothing uses, and definitions that lack what the technician needs. */
package io.faultwright.analysis.completeness;
