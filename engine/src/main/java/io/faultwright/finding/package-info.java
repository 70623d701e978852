/** What the checking found, as values; printing comes last, in {@code report}. */
package io.faultwright.finding;
