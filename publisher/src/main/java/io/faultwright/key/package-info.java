/**
 * Signatures with a person's own key, through the tools that keep it; the only starter of
 * processes.
 */
package io.faultwright.key;
