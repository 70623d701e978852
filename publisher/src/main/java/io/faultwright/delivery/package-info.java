/** A quiz as it is given out: on a phone and on paper without its answers, and with them. */
package io.faultwright.delivery;
