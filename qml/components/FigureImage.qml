// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick

/// One drawing, at the sharpness of its place. `description` is read to those who cannot see it.
Image {
    property string figure: ""
    property string description: ""
    // Drawn only once the place has its size, so that a layout in the making costs nothing.
    source: width > 8 && height > 8 ? figure : ""
    sourceSize.width: Math.max(1, Math.floor(width))
    sourceSize.height: Math.max(1, Math.floor(height))
    fillMode: Image.PreserveAspectFit
    asynchronous: false
    Accessible.role: Accessible.Graphic
    Accessible.name: description
}
