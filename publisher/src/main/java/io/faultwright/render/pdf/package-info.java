/** The book as PDF; the only user of the PDF renderer. */
package io.faultwright.render.pdf;
