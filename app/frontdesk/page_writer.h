// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "frontdesk/desk_values.h"

#include <initializer_list>
#include <map>

namespace evenfall {

/// Writes a page of the front desk block by block. Errors of fields are found by their ids.
class PageWriter {
  public:
    PageWriter(DeskPage& page, const std::map<QString, QString>& errors) : page_(page), errors_(errors) {}

    void text(const QString& words) { add({.kind = QStringLiteral("text"), .text = words}); }
    void heading(const QString& words) { add({.kind = QStringLiteral("heading"), .text = words}); }
    void caution(const QString& words) { add({.kind = QStringLiteral("caution"), .text = words}); }
    void field(const QString& id, const QString& label, const QString& value, const QString& hint = {})
    {
        add({.kind = QStringLiteral("field"), .id = id, .label = label, .text = value, .hint = hint});
    }
    void secret(const QString& id, const QString& label, const QString& value, const QString& hint = {})
    {
        add({.kind = QStringLiteral("secret"), .id = id, .label = label, .text = value, .hint = hint});
    }
    void choice(const QString& id, const QString& label, const QString& value, const QVariantList& options)
    {
        add({.kind = QStringLiteral("choice"), .id = id, .label = label, .text = value, .options = options});
    }
    void check(const QString& id, const QString& label, bool on)
    {
        add({.kind = QStringLiteral("check"), .id = id, .label = label, .text = on ? QStringLiteral("yes") : QStringLiteral("no")});
    }
    void table(const QString& id, const QStringList& columns, const QVariantList& rows, const QString& when_empty = {})
    {
        add({.kind = QStringLiteral("table"), .id = id, .text = when_empty, .columns = columns, .rows = rows});
    }
    void picture(const QString& source, const QString& words)
    {
        add({.kind = QStringLiteral("picture"), .picture = source, .pictureText = words});
    }
    /// The first one marked as main is what Enter does.
    void actions(std::initializer_list<DeskOption> all) { actions(QList<DeskOption>(all)); }
    void actions(const QList<DeskOption>& all)
    {
        Block block{.kind = QStringLiteral("actions")};
        for (const DeskOption& one : all) {
            block.options << QVariant::fromValue(one);
            if (one.main && page_.mainAction.isEmpty())
                page_.mainAction = one.id;
        }
        add(block);
    }

  private:
    /// Named so that each call above says what it fills.
    struct Block {
        QString kind, id, label, text, hint;
        QVariantList options;
        QStringList columns;
        QVariantList rows;
        QString picture, pictureText;
    };
    void add(const Block& from)
    {
        DeskBlock block;
        block.kind = from.kind;
        block.id = from.id;
        block.label = from.label;
        block.text = from.text;
        block.hint = from.hint;
        block.options = from.options;
        block.columns = from.columns;
        block.rows = from.rows;
        block.picture = from.picture;
        block.pictureText = from.pictureText;
        if (const auto found = errors_.find(from.id); !from.id.isEmpty() && found != errors_.end())
            block.error = found->second;
        page_.blocks << QVariant::fromValue(block);
    }
    DeskPage& page_;
    const std::map<QString, QString>& errors_;
};

inline DeskOption desk_option(const QString& id, const QString& label)
{
    DeskOption option;
    option.id = id;
    option.label = label;
    return option;
}

inline DeskOption desk_main(const QString& id, const QString& label)
{
    DeskOption option = desk_option(id, label);
    option.main = true;
    return option;
}

} // namespace evenfall
