@NullMarked
package rimebook.documents.web;

import org.jspecify.annotations.NullMarked;
