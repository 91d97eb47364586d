#include "ui/walls/strip_layers.h"

#include <QBoxLayout>
#include <QCoreApplication>
#include <QLabel>
#include <QSettings>
#include <QToolButton>

#include "ui/look/look.h"

namespace elbowroom::ui {
namespace {

struct Switch {
  bool StripLayers::*which;
  const char* key;
  const char* label;
  const char* tip;
  bool first;  // shown where nothing was chosen before
};
constexpr Switch kSwitches[] = {
    {&StripLayers::studs, "studs", QT_TRANSLATE_NOOP("StripLayers", "Studs"),
     QT_TRANSLATE_NOOP("StripLayers",
                       "Studs and the clear bays between them, where the plan states a wall's studs"),
     true},
    {&StripLayers::people, "people", QT_TRANSLATE_NOOP("StripLayers", "People"),
     QT_TRANSLATE_NOOP(
         "StripLayers",
         "Eyes, elbows and reach of the people who use the room, at mirrors, lights, basins and shelves"),
     false},
    {&StripLayers::backing, "backing", QT_TRANSLATE_NOOP("StripLayers", "Backing"),
     QT_TRANSLATE_NOOP("StripLayers", "Where blocking or plywood is wanted behind the finish"), false},
    {&StripLayers::electrical, "electrical", QT_TRANSLATE_NOOP("StripLayers", "Electrical"),
     QT_TRANSLATE_NOOP(
         "StripLayers",
         "Zones for receptacles, switches and lights by the editions chosen; a licensed electrician "
         "decides"),
     false},
    {&StripLayers::dimensions, "dimensions", QT_TRANSLATE_NOOP("StripLayers", "Dimensions"),
     QT_TRANSLATE_NOOP("StripLayers", "Heights above the finished floor and distances along each wall"),
     false},
};

QString settingOf(const Switch& each) { return QStringLiteral("strip_layers/") + QLatin1String(each.key); }

}  // namespace

StripLayersBar::StripLayersBar(QWidget* parent) : QWidget(parent) {
  setObjectName("strip_layers");
  setAccessibleName(tr("What the Wall strip shows"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(6, 1, 6, 1);
  row->setSpacing(3);
  auto* show = new QLabel(tr("On the walls:"), this);
  show->setFont(smallFont(*this));
  row->addWidget(show);
  for (const Switch& each : kSwitches) {
    auto* button = new QToolButton(this);
    button->setObjectName(QLatin1String(each.key));
    button->setText(QCoreApplication::translate("StripLayers", each.label));
    button->setToolTip(QCoreApplication::translate("StripLayers", each.tip));
    button->setAccessibleName(tr("Show on the walls: %1").arg(button->text()));
    button->setAccessibleDescription(button->toolTip());
    button->setCheckable(true);
    button->setAutoRaise(true);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setFont(smallFont(*this));
    const bool on = QSettings().value(settingOf(each), each.first).toBool();
    button->setChecked(on);
    layers_.*each.which = on;
    connect(button, &QToolButton::toggled, this, [this, &each](bool now) {
      QSettings().setValue(settingOf(each), now);
      set(each.which, now);
    });
    row->addWidget(button);
  }
  nobody_ = new QToolButton(this);
  nobody_->setObjectName("nobody");
  nobody_->setText(tr("Nobody is named yet: name the people…"));
  nobody_->setToolTip(tr("The heights of eyes, elbows and reach follow from who uses the room"));
  nobody_->setAccessibleName(nobody_->text());
  nobody_->setFocusPolicy(Qt::StrongFocus);
  nobody_->setFont(smallFont(*this));
  connect(nobody_, &QToolButton::clicked, this, &StripLayersBar::peopleWanted);
  row->addSpacing(6);
  row->addWidget(nobody_);
  row->addStretch(1);
  showNobody();
}

void StripLayersBar::setNobodyNamed(bool nobody) {
  nobody_named_ = nobody;
  showNobody();
}

void StripLayersBar::showNobody() { nobody_->setVisible(nobody_named_ && layers_.people); }

void StripLayersBar::set(bool StripLayers::*which, bool on) {
  if (layers_.*which == on) return;
  layers_.*which = on;
  showNobody();
  emit changed();
}

}  // namespace elbowroom::ui
