/** How good a set of cases is, as values. */
package io.faultwright.adequacy;
