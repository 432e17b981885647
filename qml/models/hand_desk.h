// SPDX-License-Identifier: GPL-3.0-or-later
// The trained hand at one step of the plan: another dose, another product, left out, or the same in another
// volume; the water it would end in is worked out again while it is being tried.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QVariantList>

#include "qml/models/back_pool.h"
#include "qml/models/plan_desk.h"

namespace brimline {

class HandDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(int step READ step NOTIFY changed)  // its order in the plan shown; 0: none
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(bool isDose READ isDose NOTIFY changed)
  Q_PROPERTY(double share READ share WRITE setShare NOTIFY changed)  // of the dose as told, 0.25 to 1.5
  Q_PROPERTY(double volume READ volume WRITE setVolume NOTIFY
                 changed)  // of the vessel's, 0.5 to 1.5; only looked at
  Q_PROPERTY(QString shareWord READ shareWord NOTIFY changed)
  Q_PROPERTY(QString volumeWord READ volumeWord NOTIFY changed)
  Q_PROPERTY(QVariantList products READ products NOTIFY changed)  // {key, word}
  Q_PROPERTY(QString product READ product WRITE setProduct NOTIFY changed)
  Q_PROPERTY(bool leftOut READ leftOut WRITE setLeftOut NOTIFY changed)
  Q_PROPERTY(QString staff READ staff WRITE setStaff NOTIFY changed)
  Q_PROPERTY(QString reason READ reason WRITE setReason NOTIFY changed)
  Q_PROPERTY(QString says READ says NOTIFY changed)  // a refusal, or what the dose would be
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(bool mayUse READ mayUse NOTIFY changed)
  Q_PROPERTY(brimline::RowModel* predicted READ predicted CONSTANT)

 public:
  HandDesk(Counter& counter, const Settings& settings, Services services, PlanDesk& plan,
           QObject* parent = nullptr);
  ~HandDesk() override;

  int step() const { return step_; }
  QString title() const { return title_; }
  bool isDose() const { return dose_; }
  double share() const { return share_; }
  void setShare(double share);
  double volume() const { return volume_; }
  void setVolume(double volume);
  QString shareWord() const;
  QString volumeWord() const;
  QVariantList products() const { return products_; }
  QString product() const { return product_; }
  void setProduct(const QString& id);
  bool leftOut() const { return left_out_; }
  void setLeftOut(bool out);
  QString staff() const { return staff_; }
  void setStaff(const QString& name);
  QString reason() const { return reason_; }
  void setReason(const QString& reason);
  QString says() const { return says_; }
  bool busy() const { return asked_ != made_; }
  bool mayUse() const;
  RowModel* predicted() { return &predicted_; }

  Q_INVOKABLE void open(int step);
  Q_INVOKABLE void close();
  Q_INVOKABLE void use();        // the change goes into the plan
  Q_INVOKABLE void asDrafted();  // every change by hand is taken out of it

 signals:
  void changed();

 private:
  void ask();
  void show(int request, const tl::expected<Plan, std::string>& plan);
  void list_predicted(const Plan* tried);
  bool is_changed() const;
  int drafted_step() const;
  std::vector<HandOrder> orders(const std::string& staff, const std::string& reason) const;

  Counter& counter_;
  const Settings& settings_;
  Services services_;
  PlanDesk& plan_;
  std::optional<Plan> told_;  // as it was when the step was opened
  int step_ = 0;
  bool dose_ = false, left_out_ = false, allowed_ = false;
  double share_ = 1, volume_ = 1;
  QString title_, product_, product_told_, staff_, reason_, says_;
  QVariantList products_;
  RowModel predicted_;
  int asked_ = 0, made_ = 0;
  BackPool pool_;
};

}  // namespace brimline
