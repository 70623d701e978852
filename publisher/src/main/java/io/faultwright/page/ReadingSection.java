package io.faultwright.page;

import java.util.List;
import java.util.Optional;

/**
 * How a reading is taken.
 *
 * @param anchor id of its element
 * @param title short name
 * @param self its own page
 * @param ask the question
 * @param facts unit, range, place, phase, instrument, access, time
 * @param values what can be observed, for a choice
 * @param applies equipment on which it can be taken; empty for all
 * @param cautions before the steps
 * @param how the steps
 * @param limits low and high
 * @param refrigerants the tables it is computed with
 * @param guide the page that explains it
 * @param symptoms where it is used
 * @param sequences in which it tells how a time is set
 */
public record ReadingSection(
    String anchor,
    String title,
    Link self,
    String ask,
    List<Fact> facts,
    List<String> values,
    List<Clause> applies,
    List<CautionPanel> cautions,
    List<String> how,
    Optional<LimitsSection> limits,
    List<Link> refrigerants,
    Optional<Link> guide,
    List<Link> symptoms,
    List<Link> sequences)
    implements Content {}
