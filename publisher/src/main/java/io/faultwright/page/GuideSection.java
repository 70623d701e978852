package io.faultwright.page;

import io.faultwright.prose.Html;
import java.util.List;

/**
 * A page of prose.
 *
 * @param anchor id of its element
 * @param title as printed
 * @param html the text
 * @param uses pages that point to it
 */
public record GuideSection(String anchor, String title, Html html, List<Link> uses)
    implements Content {}
