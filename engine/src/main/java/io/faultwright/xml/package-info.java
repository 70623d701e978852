/** XML, written element by element. */
package io.faultwright.xml;
