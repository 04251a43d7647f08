// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Quieter words beside the main ones; no smaller than the smallest size for reading.
Words {
    color: Theme.softText
    font.pixelSize: Theme.small
}
