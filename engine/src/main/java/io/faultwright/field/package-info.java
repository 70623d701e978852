/**
 * What recorded jobs say about the rules: where technicians confirmed another fault, which reading
 * tells those jobs from the others, and how often each fault is met.
 */
package io.faultwright.field;
