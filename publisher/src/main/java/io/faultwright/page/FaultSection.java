package io.faultwright.page;

import java.util.List;
import java.util.Optional;

/**
 * A fault with its repair.
 *
 * @param anchor id of its element
 * @param title as printed
 * @param self its own page
 * @param about a sentence or two
 * @param applies equipment that can have it; empty for all
 * @param cautions before everything
 * @param remedy the repair, in order
 * @param verify how to see that it worked, in order
 * @param parts spare parts with their order numbers
 * @param guide the page that explains it
 * @param symptoms where it is concluded
 */
public record FaultSection(
    String anchor,
    String title,
    Link self,
    String about,
    List<Clause> applies,
    List<CautionPanel> cautions,
    List<Step> remedy,
    List<Step> verify,
    List<Fact> parts,
    Optional<Link> guide,
    List<Link> symptoms)
    implements Content {}
