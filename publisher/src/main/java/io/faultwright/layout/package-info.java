/**
 * From a flowchart to pages with coordinates in points: measures the text, cuts what is too long
 * into parts joined by connectors, and places each part. Knows nothing of SVG.
 */
package io.faultwright.layout;
