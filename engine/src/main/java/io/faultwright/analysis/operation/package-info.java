/** Sequences of operation, looked at for every course of events there can be. */
package io.faultwright.analysis.operation;
