/** Sequences of operation as they run on one machine, step by step. */
package io.faultwright.operation;
