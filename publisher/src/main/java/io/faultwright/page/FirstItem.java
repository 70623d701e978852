package io.faultwright.page;

import java.util.List;

/**
 * What must be right before a symptom is worked.
 *
 * @param when what must hold
 * @param otherwise the symptom to work where it does not
 */
public record FirstItem(List<Clause> when, Link otherwise) {}
