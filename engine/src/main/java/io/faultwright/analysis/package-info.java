/** Exact analyses of a knowledge base, independent of Drools. */
package io.faultwright.analysis;
