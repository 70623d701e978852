/**
 * Files to text, and YAML to a tree of texts, lists and maps in which everything has its place.
 * Nothing is typed here: {@code 2.10} and {@code no} stay as they were written.
 */
package io.faultwright.syntax;
