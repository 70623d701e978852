package io.faultwright.page;

import java.util.List;
import java.util.Optional;

/**
 * A complaint with all that is needed to work it.
 *
 * @param anchor id of its element
 * @param title as printed
 * @param self its own page
 * @param about a sentence or two
 * @param applies equipment it is offered for; empty for all
 * @param recognise what the caller sees
 * @param cautions all that its readings need
 * @param first what must be right before
 * @param charts its flowchart, page by page
 * @param rules in the written order
 * @param nevers readings to take again
 * @param readings it uses, easiest first
 * @param faults it can conclude
 * @param guide the page that explains it
 * @param jumps the parts of the page
 */
public record SymptomSection(
    String anchor,
    String title,
    Link self,
    String about,
    List<Clause> applies,
    List<Clause> recognise,
    List<CautionPanel> cautions,
    List<FirstItem> first,
    List<ChartFigure> charts,
    List<RuleItem> rules,
    List<NeverItem> nevers,
    List<ReadingSection> readings,
    List<FaultSection> faults,
    Optional<Link> guide,
    List<Link> jumps)
    implements Content {}
