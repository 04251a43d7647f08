// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "kiosk/values.h"

#include <QStringList>

// What the front desk shows: one page at a time, made of blocks one below the other. Plain values, as
// those of the kiosk's screens.

namespace evenfall {

/// Something to choose or to do.
struct DeskOption {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, id)
    EVENFALL_VALUE(QString, label)
    EVENFALL_VALUE(QString, key)
    EVENFALL_VALUE(bool, main)
    EVENFALL_VALUE(bool, enabled)
  public:
    QString id, label;
    QString key; ///< of the keyboard, such as F2; empty: none
    bool main = false;
    bool enabled = true;
};

/// A row of a table; with an id it can be opened.
struct DeskRow {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, id)
    EVENFALL_VALUE(QStringList, cells)
    EVENFALL_VALUE(QString, figure)
    EVENFALL_VALUE(bool, marked)
  public:
    QString id, figure;
    QStringList cells;
    bool marked = false; ///< something about it wants attention; its cells say what
};

struct DeskBlock {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, kind)
    EVENFALL_VALUE(QString, id)
    EVENFALL_VALUE(QString, label)
    EVENFALL_VALUE(QString, text)
    EVENFALL_VALUE(QString, hint)
    EVENFALL_VALUE(QString, error)
    EVENFALL_VALUE(QVariantList, options)
    EVENFALL_VALUE(QStringList, columns)
    EVENFALL_VALUE(QVariantList, rows)
  public:
    /// text, heading, caution, field, secret, choice, check, table, actions
    QString kind;
    QString id, label;
    QString text; ///< the words; of a field its value; of a choice the option chosen; of a check "yes" or "no"
    QString hint, error;
    QVariantList options, rows;
    QStringList columns;
};

struct DeskPage {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, message)
    EVENFALL_VALUE(bool, fault)
    EVENFALL_VALUE(QVariantList, blocks)
    EVENFALL_VALUE(QVariantList, sections)
    EVENFALL_VALUE(QString, section)
    EVENFALL_VALUE(QString, focus)
    EVENFALL_VALUE(bool, busy)
    EVENFALL_VALUE(QString, busyText)
    EVENFALL_VALUE(QString, picture)
    EVENFALL_VALUE(QString, pictureText)
    EVENFALL_VALUE(QString, mainAction)
  public:
    QString title;
    QString message; ///< what came of the last action; `fault`: it failed
    QString section; ///< of `sections`; empty with the PIN, where there are none
    QString focus;   ///< the block that has the keyboard when the page comes up; empty: the first one
    QString picture, pictureText; ///< beside the blocks, or below them where there is no room
    QString busyText, mainAction; ///< Enter in a field does this
    QVariantList blocks, sections;
    bool fault = false;
    bool busy = false; ///< something is being done that takes a moment
};

} // namespace evenfall
