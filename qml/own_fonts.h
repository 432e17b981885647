// SPDX-License-Identifier: GPL-3.0-or-later
// Which fonts the counter sees, and how their edges are drawn: the system's folders, and the same on every
// machine.
#pragma once

namespace brimline {

// To be called before the application object is made. The system's own font rules are left alone: reading
// them and asking them at every size of letter takes a good part of the time to the first frame. Where our
// faces are not found this way, the system's rules stay.
void use_own_fonts();

}  // namespace brimline
