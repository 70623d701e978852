/** Pages and the book as markup, from templates; the only user of the template library. */
package io.faultwright.render.html;
