package io.faultwright.render.pdf;

/**
 * A finished book.
 *
 * @param bytes the PDF file
 * @param pages how many pages it has
 * @param undrawn characters that its typeface lacks, each once, in their order in Unicode; a
 *     question mark stands in their place
 */
public record PdfBook(byte[] bytes, int pages, String undrawn) {}
