/** Limits tables that give two figures for one situation. */
package io.faultwright.analysis.limits;
