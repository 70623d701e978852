/** Problems that keep a knowledge base from being read, as values. */
package io.faultwright.diagnostic;
