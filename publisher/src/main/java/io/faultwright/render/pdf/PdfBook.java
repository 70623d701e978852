package io.faultwright.render.pdf;

/**
 * A finished book.
 *
 * @param bytes the PDF file
 * @param pages how many pages it has
 */
public record PdfBook(byte[] bytes, int pages) {}
