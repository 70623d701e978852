/** Texts that are not translated yet, and translations of texts that are gone. */
package io.faultwright.analysis.translation;
