/** Rules, conditions and statements that do nothing, or do it twice. */
package io.faultwright.analysis.redundancy;
