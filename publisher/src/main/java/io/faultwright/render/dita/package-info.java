/** The handbook as topics and a map of the Darwin Information Typing Architecture (DITA 1.3). */
package io.faultwright.render.dita;
