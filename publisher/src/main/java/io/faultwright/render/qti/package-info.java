/** A quiz as a package of QTI 3.0, an open standard of 1EdTech. */
package io.faultwright.render.qti;
