/**
 * The order of checks that costs least on average: sets of situations, checks that divide them, and
 * what checks cost. Knows nothing of rules.
 */
package io.faultwright.sequence;
