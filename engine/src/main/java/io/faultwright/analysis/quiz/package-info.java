/** Items of a quiz out of the rules, each proved to have exactly one right choice. */
package io.faultwright.analysis.quiz;
