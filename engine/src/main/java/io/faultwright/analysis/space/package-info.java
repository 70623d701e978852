/**
 * The situations of a symptom as a finite space, independent of Drools: every reading is cut into
 * the few classes its conditions tell apart, and conditions become decision diagrams over them.
 * Exact: a class combination is kept only where a real situation lies in it.
 */
package io.faultwright.analysis.space;
