// SPDX-License-Identifier: GPL-3.0-or-later
// Beside what is longer than its place: always there, so that nobody takes the end of the page for the end.
import QtQuick
import QtQuick.Controls.Basic

ScrollBar {
    policy: size < 1 ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
}
