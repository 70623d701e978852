/**
 * Instructions against the rules of Simplified Technical English that a program can look at.
 *
 * <p>Source: ASD-STE100, Simplified Technical English, part 1, writing rules. The limits of 20
 * words a procedural sentence, one instruction a sentence and the imperative are quoted from H.
 * Kaiser, "Simplified Technical English, a globally proven trendsetter", tcworld, August 2016,
 * which excerpts the standard. How words are counted is from memory.
 */
package io.faultwright.plain;
