/** What the rules say of single situations, worked out without Drools. */
package io.faultwright.analysis.judge;
