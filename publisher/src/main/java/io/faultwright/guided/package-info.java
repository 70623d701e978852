/**
 * What the page for guided diagnosis runs from: the handbook and each symptom as data, and the
 * script that reasons with them as the engine does.
 */
package io.faultwright.guided;
