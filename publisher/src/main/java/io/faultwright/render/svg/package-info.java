/** Placed pages as SVG text: how things look, and nothing about where they stand. */
package io.faultwright.render.svg;
