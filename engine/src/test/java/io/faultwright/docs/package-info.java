/** Runs what the documents show, and keeps them as true as the code. */
package io.faultwright.docs;
