package io.faultwright.page;

import java.util.List;

/**
 * A combination that cannot happen: readings to take again.
 *
 * @param when the combination
 * @param because physics, or the build
 */
public record NeverItem(List<Clause> when, String because) {}
