/** Exact quantities: rational values, units and intervals. */
package io.faultwright.quantity;
