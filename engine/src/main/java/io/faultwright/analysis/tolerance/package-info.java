/** What could be true of a machine while instruments are only so accurate. */
package io.faultwright.analysis.tolerance;
