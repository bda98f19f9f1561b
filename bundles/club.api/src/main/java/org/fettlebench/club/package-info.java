/** What a club keeps: stock, places, members, loans and kit files, as records and repositories. */
@Export
@Version("1.0.0")
package org.fettlebench.club;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
