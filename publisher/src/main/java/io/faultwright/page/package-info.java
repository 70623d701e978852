/**
 * The handbook as data: every page of the site and every section of the book, with all words, links
 * and orders settled, so that templates only print.
 */
package io.faultwright.page;
