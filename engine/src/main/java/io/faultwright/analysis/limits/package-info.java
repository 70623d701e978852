/** Limits tables that give two figures for one situation, or figures nobody can tell apart. */
package io.faultwright.analysis.limits;
