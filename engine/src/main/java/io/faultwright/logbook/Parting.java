package io.faultwright.logbook;

import io.faultwright.resolve.Told;

/**
 * Where log and model part.
 *
 * @param entry the entry with which they do; or the last before that tells of it
 * @param step at which they do
 * @param changed whether the log says that it changed then
 * @param model what the model says at that step; nothing where it says nothing of a display
 * @param since step since which the model says so
 * @param came the phase in which the model is at that step
 */
public record Parting(Entry entry, long step, boolean changed, Told model, long since, Came came) {}
