package io.faultwright.flow;

/**
 * A line of a flowchart.
 *
 * @param from id of the node it leaves
 * @param to id of the node it enters
 * @param answer which answer takes it; empty from the start
 */
public record Edge(String from, String to, String answer) {}
