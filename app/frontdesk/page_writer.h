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

    void text(const QString& words) { add(block("text", words)); }
    void heading(const QString& words) { add(block("heading", words)); }
    void caution(const QString& words) { add(block("caution", words)); }
    void field(const QString& id, const QString& label, const QString& value, const QString& hint = {})
    {
        entry("field", id, label, value, hint);
    }
    void secret(const QString& id, const QString& label, const QString& value, const QString& hint = {})
    {
        entry("secret", id, label, value, hint);
    }
    void choice(const QString& id, const QString& label, const QString& value, const QVariantList& options)
    {
        DeskBlock one = block("choice", value, id);
        one.label = label;
        one.options = options;
        add(one);
    }
    void check(const QString& id, const QString& label, bool on)
    {
        DeskBlock one = block("check", on ? QStringLiteral("yes") : QStringLiteral("no"), id);
        one.label = label;
        add(one);
    }
    void table(const QString& id, const QStringList& columns, const QVariantList& rows, const QString& when_empty = {})
    {
        DeskBlock one = block("table", when_empty, id);
        one.columns = columns;
        one.rows = rows;
        add(one);
    }
    /// The first one marked as main is what Enter does.
    void actions(std::initializer_list<DeskOption> all) { actions(QList<DeskOption>(all)); }
    void actions(const QList<DeskOption>& all)
    {
        DeskBlock one = block("actions");
        for (const DeskOption& option : all) {
            one.options << QVariant::fromValue(option);
            if (option.main && page_.mainAction.isEmpty())
                page_.mainAction = option.id;
        }
        add(one);
    }

  private:
    static DeskBlock block(const char* kind, const QString& text = {}, const QString& id = {})
    {
        DeskBlock one;
        one.kind = QLatin1String(kind);
        one.text = text;
        one.id = id;
        return one;
    }
    void entry(const char* kind, const QString& id, const QString& label, const QString& value, const QString& hint)
    {
        DeskBlock one = block(kind, value, id);
        one.label = label;
        one.hint = hint;
        add(one);
    }
    void add(DeskBlock one)
    {
        if (const auto found = errors_.find(one.id); !one.id.isEmpty() && found != errors_.end())
            one.error = found->second;
        page_.blocks << QVariant::fromValue(one);
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
