package io.faultwright.page;

import java.util.List;

/**
 * A page of the site.
 *
 * @param path its file
 * @param title of the page
 * @param frame head and foot
 * @param style address of the style sheet
 * @param scripts addresses of the scripts it runs, in this order
 * @param start the start page
 * @param safety the page with the disclaimer
 * @param navigation the ways in
 * @param languages the same page in the other languages
 * @param content what stands between
 */
public record Page(
    String path,
    String title,
    Frame frame,
    String style,
    List<String> scripts,
    Link start,
    Link safety,
    List<Link> navigation,
    List<Tongue.Switch> languages,
    Content content) {}
